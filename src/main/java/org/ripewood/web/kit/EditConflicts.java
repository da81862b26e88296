package org.ripewood.web.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.ripewood.audit.Audit;

/**
 * Turns a form that was refused because somebody was quicker into one that tells what stands now
 * and can be sent again. Whoever asks has reached the thing before.
 */
@ApplicationScoped
public class EditConflicts {

    private final Audit audit;

    EditConflicts(Audit audit) {
        this.audit = audit;
    }

    /**
     * What a form is about.
     *
     * @param thing its table, as the record of who did what names it
     * @param names of persons, as far as the reader may know them
     */
    public record About(
            String thing,
            long id,
            List<Label> labels,
            Function<Set<Long>, Map<Long, String>> names) {}

    /**
     * The same; what was refused as stale gets the version of now, and what stands now beside every
     * field.
     *
     * @param now the form as it would be opened afresh; without a version when there is nothing to
     *     change any more
     */
    public FormState mend(FormState typed, FormState now, About about) {
        return typed.stale() && typed.form().equals(now.form())
                ? clashing(typed, now, about)
                : typed;
    }

    private FormState clashing(FormState typed, FormState now, About about) {
        var lines =
                about.labels().stream()
                        .map(label -> line(label, typed, now))
                        .filter(line -> !line.typed().isEmpty() || !line.now().isEmpty())
                        .toList();
        var last = audit.latestChange(about.thing(), about.id()).orElse(null);
        var by = last == null ? null : last.personId();
        var who = by == null ? "" : about.names().apply(Set.of(by)).getOrDefault(by, "");
        var clash = new EditConflict(lines, who, last == null ? null : last.at());
        var version = now.value("version");
        return (version.isEmpty() ? typed.without("version") : typed.with("version", version))
                .beside(clash);
    }

    private static EditConflict.Line line(Label label, FormState typed, FormState now) {
        return new EditConflict.Line(label.label(), words(label, typed), words(label, now));
    }

    private static String words(Label label, FormState form) {
        var value = form.joined(label.field());
        return value.isEmpty() ? "" : label.words().apply(value);
    }
}
