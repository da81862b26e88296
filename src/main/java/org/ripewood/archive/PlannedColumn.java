package org.ripewood.archive;

import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.platform.records.ColumnDescription;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import tools.jackson.databind.JsonNode;

/**
 * A described column with what the database says of it.
 *
 * @param longest the most characters of a text; 0 for what is no text
 */
record PlannedColumn(ColumnDescription told, ColumnType type, boolean mayBeEmpty, int longest) {

    private static final int MOST_SHOWN = 40;

    String name() {
        return told.name();
    }

    String field() {
        return told.field();
    }

    /** What is wrong with a value for it; null when nothing is. */
    @Nullable String faultOf(JsonNode value) {
        if (!type.fits(value)) {
            return "expected %s, found %s".formatted(type.words(), shown(value));
        }
        if (told.meaning() == Meaning.REFERENCE || told.meaning() == Meaning.ID) {
            return value.longValue() >= 1 && value.longValue() <= Integer.MAX_VALUE
                    ? null
                    : "expected a number from 1 on, found " + shown(value);
        }
        return type == ColumnType.TEXT ? textFault(value.stringValue()) : null;
    }

    private @Nullable String textFault(String text) {
        if (text.codePointCount(0, text.length()) > longest) {
            return "expected at most %d characters, found %d".formatted(longest, text.length());
        }
        if (!told.oneOf().isEmpty() && !told.oneOf().contains(text)) {
            return "expected one of %s, found “%s”.%s"
                    .formatted(
                            String.join(", ", told.oneOf()),
                            cut(text),
                            Suggestion.maybe(told.oneOf(), text));
        }
        if (!mayBeEmpty && text.isBlank()) {
            return "expected a value, found nothing";
        }
        return Inputs.faultOf(text, longest);
    }

    private static String shown(JsonNode value) {
        return value.isNull() ? "nothing" : cut(value.toString());
    }

    private static String cut(String text) {
        return text.length() <= MOST_SHOWN ? text : text.substring(0, MOST_SHOWN) + "…";
    }
}
