package org.ripewood.readiness;

import jakarta.validation.constraints.Size;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;

/** Which trees of a readiness sheet are asked for, as an address says it. */
public record ReadinessQuery(
        @Size(max = 60) @Nullable String heldFrom,
        @Size(max = 60) @Nullable String reason,
        @Nullable Boolean freeSoon,
        @Nullable Long student,
        @Size(max = 60) @Nullable String stage,
        @Size(max = 60) @Nullable String species,
        ReadinessAsked.@Nullable Sort sort,
        @Nullable Integer page) {

    /** All but the page, in the order of the form. */
    public static final List<String> FIELDS =
            List.of("heldFrom", "reason", "freeSoon", "student", "stage", "species", "sort");

    public static final ReadinessQuery ALL =
            new ReadinessQuery(null, null, null, null, null, null, null, null);

    private static final int ROWS = 25;

    public ReadinessAsked asked() {
        return new ReadinessAsked(
                heldFrom,
                reason,
                Boolean.TRUE.equals(freeSoon),
                student,
                stage,
                species,
                sort == null ? ReadinessAsked.Sort.HELD : sort);
    }

    /** What is asked for as it follows an address, without its page: {@code "heldFrom=wire&"}. */
    public String inAddress() {
        var told = new StringBuilder();
        add(told, "heldFrom", heldFrom);
        add(told, "reason", reason);
        add(told, "freeSoon", Boolean.TRUE.equals(freeSoon) ? "true" : null);
        add(told, "student", student);
        add(told, "stage", stage);
        add(told, "species", species);
        add(told, "sort", sort);
        return told.toString();
    }

    private static void add(StringBuilder told, String name, @Nullable Object value) {
        if (value != null && !value.toString().isBlank()) {
            told.append(name)
                    .append('=')
                    .append(URLEncoder.encode(value.toString(), StandardCharsets.UTF_8))
                    .append('&');
        }
    }

    public PageRequest rows() {
        return new PageRequest(page == null ? 0 : page, ROWS);
    }
}
