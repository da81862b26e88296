package org.ripewood.web.kit;

import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;

/**
 * What stands in the fields of a form: the defaults of a fresh one, or what was typed into one that
 * was refused, with what was wrong.
 *
 * @param form name of the form, unique on its page
 * @param clash what was typed beside what stands now; null unless somebody was quicker
 */
public record FormState(
        String form,
        Map<String, List<String>> values,
        @Nullable Problem problem,
        @Nullable EditConflict clash) {

    /** Hidden fields, and those whose value is never shown again. */
    private static final Pattern NEVER_TYPED = Pattern.compile("token|^once$|[pP]assword");

    private static final int CONFLICT = 409;
    private static final int STALE = 412;

    public FormState {
        values = Map.copyOf(values);
    }

    public FormState(String form, Map<String, List<String>> values, @Nullable Problem problem) {
        this(form, values, problem, null);
    }

    public static FormState fresh(String form) {
        return new FormState(form, Map.of(), null);
    }

    public static FormState of(String form, MultivaluedMap<String, String> asked) {
        return new FormState(form, new HashMap<>(asked), null);
    }

    public static FormState refused(
            String form, MultivaluedMap<String, String> sent, Problem problem) {
        return new FormState(form, new HashMap<>(sent), problem);
    }

    public FormState with(String field, Object value) {
        var all = new HashMap<>(values);
        all.put(field, List.of(value.toString()));
        return new FormState(form, all, problem, clash);
    }

    public FormState without(String field) {
        var all = new HashMap<>(values);
        all.remove(field);
        return new FormState(form, all, problem, clash);
    }

    /** The same, with what stands now told beside it. */
    FormState beside(EditConflict now) {
        return new FormState(form, values, problem, now);
    }

    /** Whether it was refused because somebody was quicker. */
    boolean stale() {
        return problem != null && problem.status() == STALE;
    }

    public FormState withAll(String field, List<?> several) {
        var all = new HashMap<>(values);
        all.put(field, several.stream().map(Object::toString).toList());
        return new FormState(form, all, problem, clash);
    }

    public FormState withIfKnown(String field, @Nullable Object value) {
        return value == null ? this : with(field, value);
    }

    /** The same fields in a form of another name, for a form that a page holds several times. */
    public FormState named(Object name) {
        return new FormState(form + "-" + name, values, problem, clash);
    }

    /** This, when it was typed into that form; a fresh form otherwise. */
    public FormState orFresh(String other, FormState fresh) {
        return form.equals(other) ? this : fresh;
    }

    /** What stands in one of several forms of a page. */
    public FormState formOr(String other) {
        return orFresh(other, fresh(other));
    }

    /** All that a field holds; none when it was left out. */
    public List<String> several(String field) {
        return values.getOrDefault(field, List.of());
    }

    /** Whether anything typed stands in the form again: no page repeats a password. */
    public boolean keepsTyped() {
        return values.entrySet().stream()
                .filter(entry -> !NEVER_TYPED.matcher(entry.getKey()).find())
                .anyMatch(entry -> entry.getValue().stream().anyMatch(value -> !value.isBlank()));
    }

    public boolean refused() {
        return problem != null;
    }

    /** Whether what stands by now does not allow it: then its form may be gone from the page. */
    public boolean overtaken() {
        return problem != null && problem.status() == CONFLICT && clash == null;
    }

    /** The sentences that were typed, which nobody likes to type again. */
    public List<String> sentences() {
        return values.values().stream()
                .flatMap(List::stream)
                .filter(value -> value.strip().contains(" "))
                .sorted()
                .toList();
    }

    public String value(String field) {
        var found = values.getOrDefault(field, List.of());
        return found.isEmpty() ? "" : found.get(0);
    }

    /** All of a field's values, as one text. */
    String joined(String field) {
        return String.join(", ", values.getOrDefault(field, List.of()));
    }

    /** One of a field's repeated values, counted from 0. */
    public String nth(String field, int index) {
        var found = values.getOrDefault(field, List.of());
        return index < found.size() ? found.get(index) : "";
    }

    /** The fields that are filled in, as the rest of an address's question. */
    public String query(List<String> fields) {
        return fields.stream()
                .filter(field -> !value(field).isEmpty())
                .map(
                        field ->
                                "&%s=%s"
                                        .formatted(
                                                field,
                                                URLEncoder.encode(
                                                        value(field), StandardCharsets.UTF_8)))
                .collect(Collectors.joining());
    }

    public boolean has(String field, Object value) {
        return values.getOrDefault(field, List.of()).contains(value.toString());
    }

    public String id(String field) {
        return form + "-" + field.replaceAll("\\[.*", "").replaceAll("[^A-Za-z0-9_-]", "-");
    }

    /** What was wrong with a field; null when nothing was. Entries of a list tell on the list. */
    public @Nullable String fault(String field) {
        if (problem == null) {
            return null;
        }
        return problem.faults().stream()
                .filter(fault -> names(fault.field(), field))
                .map(Fault::message)
                .findFirst()
                .orElse(null);
    }

    /** Whether it is the first field that was wrong: it is where a reader goes on. */
    public boolean first(String field) {
        return problem != null
                && !problem.faults().isEmpty()
                && names(problem.faults().get(0).field(), field);
    }

    /** A fault of an entry, such as {@code roles[]}, is told at the field of its list. */
    private static boolean names(String faulty, String field) {
        return faulty.equals(field) || faulty.startsWith(field + "[");
    }
}
