package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.sites.NewSite;

/** Reads {@code sites.yaml}: where trees stand. */
final class SitesFile {

    private final Rooms rooms;
    private final Script script;
    private final @Nullable Long given;

    /**
     * @param given the site of the school's own that stands for all of these; null to enter them
     */
    SitesFile(Rooms rooms, Script script, @Nullable Long given) {
        this.given = given;
        this.rooms = rooms;
        this.script = script;
    }

    void read(Entry file, Page page) {
        for (var entry : file.entries("sites")) {
            var site = script.codes().declare(Ref.site(entry.text("code")), entry, "code");
            var further =
                    entry.texts("alsoCalled").stream()
                            .map(
                                    cell ->
                                            script.codes()
                                                    .declare(
                                                            Ref.site(cell.text()),
                                                            entry,
                                                            "alsoCalled"))
                            .toList();
            var by = script.by(entry);
            var input =
                    new NewSite(
                            entry.text("name"),
                            entry.number("latitude"),
                            entry.number("longitude"),
                            entry.text("zone"),
                            entry.flag("schoolGround"),
                            means(entry, "meanMinimaCelsius"),
                            means(entry, "meanMaximaCelsius"));
            script.add(
                    entry,
                    page.loadingDay(),
                    register -> {
                        long id =
                                given != null
                                        ? given
                                        : rooms.treeSites
                                                .enter(register.actor(by), rooms.checked(input))
                                                .id();
                        register.put(site, id);
                        further.forEach(code -> register.put(code, id));
                    });
        }
        file.close();
    }

    private static @Nullable List<Double> means(Entry entry, String key) {
        var means = new ArrayList<Double>();
        for (var cell : entry.texts(key)) {
            var mean = Entry.parseNumber(cell.text());
            if (mean == null) {
                entry.fault(key, "%s must be numbers, found \"%s\"".formatted(key, cell.text()));
            } else {
                means.add(mean);
            }
        }
        return means.isEmpty() ? null : means;
    }
}
