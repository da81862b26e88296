package org.ripewood.pictures;

import java.util.ArrayList;
import java.util.List;

/** What a picture of a closing wound says to those who do not see it. */
record ClosureWords(ClosureDrawing drawing, Units units) {

    String title() {
        return "Closing of the wound: " + drawing.wound();
    }

    String description() {
        var looks = drawing.looks();
        String measured =
                switch (looks.size()) {
                    case 0 -> "Nothing measured yet.";
                    case 1 ->
                            "Measured once: %s open on %s."
                                    .formatted(
                                            units.length(looks.get(0).openMm()),
                                            Wording.day(looks.get(0).on()));
                    default ->
                            "Measured %d times: %s open on %s, %s on %s."
                                    .formatted(
                                            looks.size(),
                                            units.length(looks.get(0).openMm()),
                                            Wording.day(looks.get(0).on()),
                                            units.length(looks.get(looks.size() - 1).openMm()),
                                            Wording.day(looks.get(looks.size() - 1).on()));
                };
        return "%s Closed enough, at most %s open: %s."
                .formatted(
                        measured,
                        units.length(drawing.thresholdMm()),
                        Wording.outlook(drawing.outlook()).replaceAll("\\.$", ""));
    }

    TextTable table() {
        var rows = new ArrayList<List<String>>();
        for (var look : drawing.looks()) {
            rows.add(
                    List.of(
                            Wording.day(look.on()),
                            "measured",
                            units.length(look.openMm()),
                            "± " + units.length(drawing.errorMm())));
        }
        var told = TextTable.ofSeries(title(), columns(), rows);
        var all = new ArrayList<>(told.rows());
        int step = Math.max(1, drawing.band().size() / 12);
        for (int i = 0; i < drawing.band().size(); i += step) {
            var opening = drawing.band().get(i);
            all.add(
                    List.of(
                            Wording.day(opening.on()),
                            "expected",
                            units.length(opening.likelyMm()),
                            "%s to %s"
                                    .formatted(
                                            units.bare(opening.leastMm()),
                                            units.length(opening.mostMm()))));
        }
        return new TextTable(told.caption(), columns(), all);
    }

    private static List<String> columns() {
        return List.of("Day", "Kind", "Opening", "Range");
    }
}
