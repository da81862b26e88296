package org.ripewood.transfer;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.sites.NewSite;

/** Reads {@code sites.yaml}: where trees stand. */
final class SitesFile {

    private final Rooms rooms;
    private final Script script;

    SitesFile(Rooms rooms, Script script) {
        this.rooms = rooms;
        this.script = script;
    }

    void read(Entry file, Page page) {
        for (var entry : file.entries("sites")) {
            var site = script.codes().declare(Ref.site(entry.text("code")), entry, "code");
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
                    register ->
                            register.put(
                                    site,
                                    rooms.treeSites
                                            .enter(register.actor(by), rooms.checked(input))
                                            .id()));
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
