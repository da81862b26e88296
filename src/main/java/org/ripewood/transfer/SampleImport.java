package org.ripewood.transfer;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sample.SampleLoading;
import org.ripewood.transfer.Ref.Kind;

/** Reads the sample course from its files and enters it as the demo school is entered. */
@ApplicationScoped
class SampleImport implements SampleLoading {

    private final SchoolImport schoolImport;
    private final Today today;

    SampleImport(SchoolImport schoolImport, Today today) {
        this.schoolImport = schoolImport;
        this.today = today;
    }

    @Override
    public Loaded load(Actor teacher, @Nullable Long siteId) {
        var entered = entered(new Given(teacher, siteId));
        var people =
                entered.ids(Kind.PERSON).stream().filter(id -> id != teacher.personId()).toList();
        return new Loaded(
                entered.ids(Kind.COURSE).iterator().next(),
                people,
                siteId == null ? entered.ids(Kind.SITE).iterator().next() : null);
    }

    /**
     * A school may have put other course content in the place of what the sample was written for.
     */
    private ImportedIds entered(Given given) {
        try {
            return schoolImport.loadSample(SchoolFiles.sample(), today.date(), given);
        } catch (FaultyFiles faulty) {
            throw Refused.conflict(
                    "The sample course does not fit the course content in force: %s."
                            .formatted(first(faulty.faults())),
                    "Maybe leave your own content out while you try the sample.");
        }
    }

    private static String first(List<FileFault> faults) {
        var told = faults.get(0).toString();
        return told.endsWith(".") ? told.substring(0, told.length() - 1) : told;
    }
}
