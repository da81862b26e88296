package org.ripewood.api;

import com.fasterxml.jackson.databind.util.RawValue;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A call that was good before one field of it was spoilt; what there is to spoil is read from the
 * record the body goes into, so that a new field is tried without anybody thinking of it.
 */
record Spoilt(String field, String how, Call call) {

    /** Texts that have to be one of a list, or of a narrow form; any hostile text is none of it. */
    private static final Set<String> CODED =
            Set.of(
                    "species",
                    "technique",
                    "fact",
                    "value",
                    "lesson",
                    "rubric",
                    "kind",
                    "containerKind",
                    "login",
                    "zone");

    private static final List<String> NO_DAYS =
            List.of(
                    "2026-02-30",
                    "2025-02-29",
                    "2026-13-01",
                    "0000-00-00",
                    "1899-12-31",
                    "9999-12-31",
                    "99999-01-01",
                    "+99999-01-01",
                    "-2020-01-01",
                    "2026-1-1",
                    "2026-01-01T00:00:00Z",
                    "yesterday",
                    "");

    static Stream<Spoilt> each(Call good, Class<?> body) {
        return Arrays.stream(body.getRecordComponents()).flatMap(part -> of(good, part));
    }

    private static Stream<Spoilt> of(Call good, RecordComponent part) {
        var field = part.getName();
        var spoilt = new ArrayList<Spoilt>();
        if (needed(part)) {
            spoilt.add(new Spoilt(field, "left out", good.without(field)));
            spoilt.add(new Spoilt(field, "null", good.with(field, raw("null"))));
        }
        values(part)
                .forEach(
                        (how, value) ->
                                spoilt.add(new Spoilt(field, how, good.with(field, value))));
        return Stream.concat(spoilt.stream(), inFirst(good, part));
    }

    /** What is spoilt in the first record of a list. */
    private static Stream<Spoilt> inFirst(Call good, RecordComponent part) {
        var field = part.getName();
        if (!(part.getGenericType() instanceof ParameterizedType list)
                || !(list.getActualTypeArguments()[0] instanceof Class<?> type)
                || !type.isRecord()) {
            return Stream.empty();
        }
        @SuppressWarnings("unchecked")
        var first = ((List<Map<String, Object>>) good.body().get(field)).get(0);
        var alone = new Call(good.endpoint(), good.url(), first, good.version());
        return each(alone, type)
                .map(
                        in ->
                                new Spoilt(
                                        field + "[0]." + in.field(),
                                        in.how(),
                                        good.with(field, List.of(in.call().body()))));
    }

    private static boolean needed(RecordComponent part) {
        return Stream.of(NotNull.class, NotBlank.class, NotEmpty.class)
                .anyMatch(rule -> find(part, rule) != null);
    }

    private static Map<String, Object> values(RecordComponent part) {
        var type = part.getType();
        var values = new LinkedHashMap<String, Object>();
        values.put("an object", Map.of("a", 1));
        if (type == String.class) {
            texts(part, values);
        } else if (type == Double.class) {
            numbers(part, values);
        } else if (type == Long.class) {
            ids(values);
        } else if (type == Integer.class) {
            wholes(part, values);
        } else if (type == LocalDate.class) {
            NO_DAYS.forEach(day -> values.put("day " + day, day));
            values.put("a number for a day", 20260101);
            values.put("a list for a day", List.of(2024, 1, 1));
        } else if (type == LocalTime.class) {
            Stream.of("25:00", "9", "12:61", "noon", "").forEach(t -> values.put("time " + t, t));
            values.put("a number for a time", 930);
            values.put("a list for a time", List.of(9, 30));
        } else if (type == boolean.class || type == Boolean.class) {
            values.put("a word", "maybe");
            values.put("a number", 1);
            values.put("a list", List.of());
        } else if (type.isEnum()) {
            values.put("an unknown word", "NOTHING_OF_THE_SORT");
            values.put("a number for a word", 0);
            values.put("script", "<script>alert(1)</script>");
        } else if (Collection.class.isAssignableFrom(type)) {
            lists(part, values);
        } else if (Map.class.isAssignableFrom(type)) {
            values.clear();
            maps(values);
        } else if (type.isRecord()) {
            values.clear();
            values.put("a number for a record", 7);
            values.put("a text for a record", "noon");
            values.put("a list for a record", List.of(1));
            return values;
        } else {
            throw new IllegalStateException("nobody has thought of how to spoil a " + type);
        }
        if (type != String.class) {
            values.put("an empty text", "");
            values.put("a text of blanks", "  ");
            values.put("a text of the null character", "\u0000");
        }
        return values;
    }

    private static void texts(RecordComponent part, Map<String, Object> values) {
        values.put("a number", 5);
        values.put("a fraction", 5.5);
        values.put("true", true);
        values.put("a list", List.of("a"));
        values.put("5000 characters", "a".repeat(5000));
        var size = find(part, Size.class);
        if (size != null) {
            values.put("one character too many", "a".repeat(size.max() + 1));
        }
        values.put("the null character", "a\u0000b");
        values.put("a bell", "a\u0007b");
        values.put("an escape", "a\u001b[31mb");
        values.put("a right-to-left override", "a\u202eb");
        values.put("a right-to-left mark", "a\u200fb");
        values.put("half a character", raw("\"a\\ud800b\""));
        if (!part.getName().equals("password")) {
            values.put("script", "<script>alert(1)</script>");
            values.put("an event handler", "<img src=x onerror=alert(1)>");
        }
        if (needed(part)) {
            values.put("nothing", "");
            values.put("blanks", "   ");
            values.put("an ideographic space", "\u3000");
        }
        if (CODED.contains(part.getName())) {
            values.put("SQL", "x'; drop table tree; --");
            values.put("a path", "../../etc/passwd");
        }
        if (CODED.contains(part.getName()) && !part.getName().equals("login")) {
            values.put("an unknown word", "nothing_of_the_sort");
        }
    }

    private static void numbers(RecordComponent part, Map<String, Object> values) {
        var least = Double.parseDouble(find(part, DecimalMin.class).value());
        var most = Double.parseDouble(find(part, DecimalMax.class).value());
        values.put("too little", Math.nextDown(least) - 0.001);
        values.put("too much", Math.nextUp(most) + 0.001);
        values.put("a word", "five");
        values.put("a number in quotation marks", "5");
        values.put("NaN as a word", "NaN");
        values.put("infinity as a word", "Infinity");
        values.put("NaN", raw("NaN"));
        values.put("infinity", raw("Infinity"));
        values.put("1e400", raw("1e400"));
        values.put("-1e400", raw("-1e400"));
        values.put("a number of 1200 digits", raw("1".repeat(1200)));
        values.put("true", true);
        values.put("a list", List.of(1.0));
        if (least > 0) {
            values.put("negative zero", raw("-0.0"));
        }
    }

    private static void wholes(RecordComponent part, Map<String, Object> values) {
        values.put("too little", find(part, Min.class).value() - 1);
        values.put("too much", find(part, Max.class).value() + 1);
        values.put("a word", "five");
        values.put("a number in quotation marks", "1");
        values.put("half", 1.5);
        values.put("too long for a number", raw("99999999999999999999"));
        values.put("1e400", raw("1e400"));
        values.put("true", true);
        values.put("a list", List.of(1));
    }

    private static void ids(Map<String, Object> values) {
        values.put("a word", "five");
        values.put("a number in quotation marks", "1");
        values.put("half", 1.5);
        values.put("nobody's", Long.MAX_VALUE);
        values.put("negative", -1);
        values.put("zero", 0);
        values.put("too long for an id", raw("99999999999999999999"));
        values.put("1e400", raw("1e400"));
        values.put("SQL", "1 or 1=1");
        values.put("true", true);
        values.put("a list", List.of(1));
    }

    private static void lists(RecordComponent part, Map<String, Object> values) {
        values.put("a word", "STUDENT");
        values.put("a number", 1);
        values.put("true in it", List.of(true));
        values.put("nothing in it", Collections.singletonList(null));
        values.put("a list in it", List.of(List.of()));
        values.put("a word in it", List.of("NOTHING_OF_THE_SORT"));
        values.put("too many", Collections.nCopies(5000, 1));
        if (find(part, NotEmpty.class) != null || find(part, Size.class).min() > 0) {
            values.put("an empty list", List.of());
        }
    }

    private static void maps(Map<String, Object> values) {
        values.put("a word", "all of them");
        values.put("a list", List.of("a"));
        values.put("a number in it", Map.of("recovery", 5));
        values.put("a list in it", Map.of("recovery", List.of()));
        values.put("an empty key", Map.of("", "because"));
        values.put("a long key", Map.of("k".repeat(500), "because"));
        values.put("a long text in it", Map.of("recovery", "a".repeat(5000)));
        values.put("a control character in it", Map.of("recovery", "a\u0000b"));
        var many = new HashMap<String, String>();
        for (int i = 0; i < 500; i++) {
            many.put("key" + i, "because");
        }
        values.put("too many", many);
    }

    /**
     * @return the annotation on the field, where Bean Validation reads it
     */
    private static <A extends Annotation> A find(RecordComponent part, Class<A> rule) {
        try {
            var field = part.getDeclaringRecord().getDeclaredField(part.getName());
            return field.getAnnotation(rule);
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }

    private static RawValue raw(String json) {
        return new RawValue(json);
    }

    @Override
    public String toString() {
        return "%s: %s %s".formatted(call.endpoint(), field, how);
    }
}
