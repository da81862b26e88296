package org.ripewood.sites;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/**
 * Finds towns by their names, however their letters are marked. (GeoNames gazetteer, licence CC BY
 * 4.0: places of more than 1,000 people and seats of administration; coordinates to a hundredth of
 * a degree.)
 *
 * <p>The list is read through at each search and not held in memory: it is asked for when a site is
 * entered.
 */
public final class Towns {

    /** More are not told apart at a glance (our own choice). */
    static final int MOST = 20;

    private static final String FILE = "/places/towns.txt.gz";
    private static final int SHORTEST_BEGINNING = 3;

    private Towns() {}

    /**
     * Towns of that name, then those whose names begin with it; at most {@value #MOST}.
     *
     * @param typed a name, and behind a comma the beginning of a region or country if wanted
     */
    public static List<Town> find(String typed) {
        try (var file = Objects.requireNonNull(Towns.class.getResourceAsStream(FILE), FILE);
                var lines =
                        new BufferedReader(
                                new InputStreamReader(
                                        new GZIPInputStream(file), StandardCharsets.UTF_8))) {
            return find(lines, typed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same in a list: "@country, tab, region", then "name, tab, latitude, tab, longitude". */
    static List<Town> find(BufferedReader lines, String typed) throws IOException {
        int comma = typed.indexOf(',');
        var name = plain(comma < 0 ? typed : typed.substring(0, comma));
        var where = comma < 0 ? "" : plain(typed.substring(comma + 1));
        var exact = new ArrayList<Town>();
        var beginning = new ArrayList<Town>();
        var country = "";
        var region = "";
        boolean here = true;
        for (var line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith("@")) {
                var cells = line.substring(1).split("\t", -1);
                country = cells[0];
                region = cells[1];
                here = liesIn(where, country, region);
            } else if (here && !name.isEmpty()) {
                var cells = line.split("\t", -1);
                var plain = plain(cells[0]);
                if (plain.equals(name)) {
                    exact.add(town(cells, country, region));
                } else if (name.length() >= SHORTEST_BEGINNING
                        && beginning.size() < MOST
                        && plain.startsWith(name)) {
                    beginning.add(town(cells, country, region));
                }
            }
        }
        return Stream.concat(exact.stream(), beginning.stream()).limit(MOST).toList();
    }

    private static Town town(String[] cells, String country, String region) {
        return new Town(
                cells[0],
                region,
                country,
                Double.parseDouble(cells[1]),
                Double.parseDouble(cells[2]));
    }

    private static boolean liesIn(String where, String country, String region) {
        return where.isEmpty()
                || plain(region).startsWith(where)
                || plain(countryName(country)).startsWith(where)
                || country.toLowerCase(Locale.ROOT).equals(where);
    }

    /** What a country is called in English. */
    static String countryName(String code) {
        return new Locale("", code).getDisplayCountry(Locale.UK);
    }

    /** Small letters without marks; hyphens and full stops are blanks. */
    private static String plain(String text) {
        var small = text.strip().toLowerCase(Locale.ROOT);
        var letters =
                small.chars().allMatch(letter -> letter < 128)
                        ? small
                        : Normalizer.normalize(small, Normalizer.Form.NFKD)
                                .replaceAll("\\p{M}+", "")
                                .replace("ß", "ss")
                                .replace("ø", "o")
                                .replace("ł", "l")
                                .replace("æ", "ae");
        return letters.replaceAll("[-.'’ ]+", " ");
    }
}
