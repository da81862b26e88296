package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Takes in files of daily readings. */
@ApplicationScoped
public class ReadingsBook {

    private final Sites sites;
    private final ReadingRows rows;
    private final Today today;

    ReadingsBook(Sites sites, ReadingRows rows, Today today) {
        this.sites = sites;
        this.rows = rows;
        this.today = today;
    }

    public ReadingsImport take(long siteId, String text) {
        var site = sites.get(siteId);
        var found = read(text, today.last(List.of(site.zone())));
        if (found.readings().isEmpty()) {
            throw nothingIn(found);
        }
        return ReadingsImport.of(found, rows.keep(siteId, found.readings()));
    }

    private static ReadingsInText read(String text, LocalDate last) {
        try {
            return DailyReadingsText.read(new StringReader(text), last);
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory always reads", e);
        }
    }

    private static Refused nothingIn(ReadingsInText found) {
        var faults =
                found.faults().stream()
                        .map(
                                fault ->
                                        new Fault(
                                                "line " + fault.line(),
                                                "found “%s”, expected %s"
                                                        .formatted(
                                                                fault.found(), fault.expected())))
                        .toList();
        return new Refused(
                new Problem(
                        400,
                        "invalid",
                        "No reading could be taken",
                        "Of %d faulty line(s), %d doubtful value(s) and %d incomplete day(s) nothing was left; nothing was stored."
                                .formatted(found.faultCount(), found.flagged(), found.incomplete()),
                        "Maybe the file has other columns: " + ReadingsLayout.EXPECTED + ".",
                        faults));
    }
}
