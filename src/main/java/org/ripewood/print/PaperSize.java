package org.ripewood.print;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/** Sheets a paper is laid out for. */
enum PaperSize {
    /** ISO 216. */
    A4("A4", "210mm", "297mm"),

    /** ANSI/ASME Y14.1. */
    LETTER("US Letter", "8.5in", "11in");

    private final String title;
    private final String shorter;
    private final String longer;

    PaperSize(String title, String shorter, String longer) {
        this.title = title;
        this.shorter = shorter;
        this.longer = longer;
    }

    /** A4 when nothing is asked for; 400 when there is no such sheet. */
    static PaperSize of(@Nullable String asked) {
        if (asked == null) {
            return A4;
        }
        return Arrays.stream(values())
                .filter(size -> size.code().equals(asked))
                .findFirst()
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "size",
                                        "expected one of %s, found \"%s\""
                                                .formatted(codes(), asked)));
    }

    private static List<String> codes() {
        return Arrays.stream(values()).map(PaperSize::code).toList();
    }

    /** As it is asked for in an address. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String title() {
        return title;
    }

    /** Width and height as a style sheet writes them. */
    String measures(boolean onItsSide) {
        return onItsSide ? longer + " " + shorter : shorter + " " + longer;
    }
}
