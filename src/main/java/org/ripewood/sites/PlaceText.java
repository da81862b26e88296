package org.ripewood.sites;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/**
 * Reads coordinates as people write them: decimal degrees with point or comma, degrees and minutes,
 * degrees, minutes and seconds, with signs or with the letters N, S, E, W before or behind, and
 * geo: addresses. Latitude stands first, unless letters say otherwise. (Forms of ISO 6709:2008,
 * Annex D, and of RFC 5870; both from memory.)
 */
public final class PlaceText {

    /** A place in degrees, south and west negative. */
    public record Point(double latitude, double longitude) {}

    /** The field that faults are told at. */
    public static final String FIELD = "place";

    private static final int LONGEST = 120;
    private static final String EXAMPLES = "48.14, 11.58 or 48°08'24\"N 11°34'48\"E";
    private static final double SIXTY = 60;

    /** A hundred thousandth of a degree is about a metre. */
    private static final double ROUNDING = 1e5;

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");
    private static final Pattern LETTER = Pattern.compile("[NSEW]");
    private static final Pattern EAST_OR_WEST = Pattern.compile("(?<![A-Z])O(?![A-Z])");
    private static final Pattern SECOND_DEGREES =
            Pattern.compile("(\\D*\\d+(?:\\.\\d+)?\\s*°.*?)([+-]?\\s*\\d+(?:\\.\\d+)?\\s*°.*)");
    private static final Pattern ONE =
            Pattern.compile(
                    "([NSEW])?\\s*([+-])?\\s*(\\d+(?:\\.\\d+)?)"
                            + "(?:[\\s°:]+(\\d+(?:\\.\\d+)?)(?:[\\s':]+(\\d+(?:\\.\\d+)?))?)?"
                            + "[\\s°'\":]*([NSEW])?");

    /** Decimal commas, and a comma between as well. */
    private static final String ONLY_COMMAS = "[+-]?\\d+,\\d+,[+-]?\\d+,\\d+";

    private static final Pattern URI =
            Pattern.compile(
                    "GEO:(-?\\d+(?:\\.\\d+)?),(-?\\d+(?:\\.\\d+)?)(?:,-?\\d+(?:\\.\\d+)?)?(;.*)?");

    /** Signs that look alike are one sign; words are their letters or signs. */
    private static final List<Map.Entry<String, String>> SPELLINGS =
            List.of(
                    Map.entry("[′’‘´`ʹ]", "'"),
                    Map.entry("[″”“„]|''", "\""),
                    Map.entry("[º˚∘]", "°"),
                    Map.entry("[−–—]", "-"),
                    Map.entry("[\\u00A0\\u2007\\u2009\\u202F]", " "),
                    Map.entry("\\bNORTH\\b", "N"),
                    Map.entry("\\bSOUTH\\b", "S"),
                    Map.entry("\\bEAST\\b", "E"),
                    Map.entry("\\bWEST\\b", "W"),
                    Map.entry("\\bDEG(REES?)?\\b", "°"),
                    Map.entry("\\bMIN(UTES?)?\\b", "'"),
                    Map.entry("\\bSEC(ONDS?)?\\b", "\""));

    private PlaceText() {}

    /**
     * The place that was written; empty where no digit is, as in the name of a town.
     *
     * @throws Refused 400 at {@link #FIELD} for what is no place on earth, or cannot be read
     */
    public static Optional<Point> read(String typed) {
        if (typed.length() > LONGEST) {
            throw fault("expected at most %d characters".formatted(LONGEST));
        }
        var text = oneSpelling(typed);
        if (text.startsWith("GEO:")) {
            return Optional.of(uri(text, typed));
        }
        if (text.chars().noneMatch(letter -> letter >= '0' && letter <= '9')) {
            return Optional.empty();
        }
        var plain = withoutLabels(text, typed);
        if (!plain.matches("[0-9NSEW+\\-.,;/:°'\" ]*")) {
            throw fault(
                    EAST_OR_WEST.matcher(plain).find()
                            ? "“O” is east in one language and west in another; write E or W"
                            : unread(typed));
        }
        var halves = halves(plain, typed);
        return Optional.of(point(one(halves.get(0), typed), one(halves.get(1), typed)));
    }

    private static String oneSpelling(String typed) {
        var text = typed.strip().toUpperCase(Locale.ROOT);
        for (var spelling : SPELLINGS) {
            text = text.replaceAll(spelling.getKey(), spelling.getValue());
        }
        return text.replaceAll("\\s+", " ");
    }

    /** "lat" and "lon" say no more than the order, which has to be that one. */
    private static String withoutLabels(String text, String typed) {
        int latitude = text.indexOf("LAT");
        int longitude = text.indexOf("LON");
        if (latitude >= 0 && longitude >= 0 && longitude < latitude) {
            throw fault("expected the latitude first, found " + quoted(typed));
        }
        return text.replaceAll("\\b(LAT(ITUDE)?|LON(G(ITUDE)?)?|LNG)\\b ?[:=]?", "").strip();
    }

    private static Point uri(String text, String typed) {
        var parts = URI.matcher(text);
        if (!parts.matches()) {
            throw fault("expected an address such as geo:48.14,11.58, found " + quoted(typed));
        }
        var more = parts.group(3);
        if (more != null && more.contains("CRS=") && !more.contains("CRS=WGS84")) {
            throw fault("expected the coordinates in WGS 84, found others");
        }
        return checked(Double.parseDouble(parts.group(1)), Double.parseDouble(parts.group(2)));
    }

    /** Commas are points of decimals, or stand between the two; what is clear by itself decides. */
    private static List<String> halves(String text, String typed) {
        var between = text.replaceAll(" ?[;/]+ ?", ";").replaceAll(";$", "");
        if (between.contains(".")) {
            return required(split(between.replace(',', ';')), typed);
        }
        var commas = between.split(",", -1);
        if (commas.length == 4 && between.matches(ONLY_COMMAS)) {
            return required(split("%s.%s;%s.%s".formatted((Object[]) commas)), typed);
        }
        var decimals = between.replaceAll(", | ,|,$", ";").replaceAll("(\\d),(\\d)", "$1.$2");
        var found = split(decimals.replace(',', ';'));
        if (found == null) {
            // two whole numbers with nothing but a comma between
            found = split(between.replace(',', ';'));
        }
        return required(found, typed);
    }

    private static List<String> required(@Nullable List<String> halves, String typed) {
        if (halves == null) {
            throw fault(unread(typed));
        }
        return halves;
    }

    /** The two coordinates; null when there are not two to be told apart. */
    private static @Nullable List<String> split(String text) {
        if (text.contains(";")) {
            var parts = text.split(";", -1);
            return parts.length == 2 && !parts[0].isBlank() && !parts[1].isBlank()
                    ? List.of(parts[0].strip(), parts[1].strip())
                    : null;
        }
        var letters = LETTER.matcher(text).results().toList();
        if (letters.size() == 2) {
            int at = letters.get(0).start() == 0 ? letters.get(1).start() : letters.get(0).end();
            return cut(text, at);
        }
        var degrees = SECOND_DEGREES.matcher(text);
        if (degrees.matches()) {
            return cut(text, degrees.start(2));
        }
        var numbers = NUMBER.matcher(text).results().toList();
        int half = numbers.size() / 2;
        return numbers.size() % 2 == 0 && half >= 1 && half <= 3
                ? cut(text, numbers.get(half).start())
                : null;
    }

    private static List<String> cut(String text, int at) {
        return List.of(text.substring(0, at).strip(), text.substring(at).strip());
    }

    /**
     * One coordinate.
     *
     * @param letter null when it was told by none
     */
    private record Coordinate(double degrees, @Nullable String letter) {

        boolean isLongitude() {
            return "E".equals(letter) || "W".equals(letter);
        }

        boolean isLatitude() {
            return "N".equals(letter) || "S".equals(letter);
        }
    }

    private static Coordinate one(String text, String typed) {
        var parts = ONE.matcher(text);
        if (!parts.matches()) {
            throw fault(unread(typed));
        }
        var letter = parts.group(1) == null ? parts.group(6) : parts.group(1);
        boolean twice = parts.group(1) != null && parts.group(6) != null;
        boolean minus = "-".equals(parts.group(2));
        if (twice || (minus && letter != null)) {
            throw fault(
                    "expected either a sign or one letter of N, S, E, W, found both in "
                            + quoted(text));
        }
        var numbers = new ArrayList<String>();
        for (int i = 3; i <= 5; i++) {
            if (parts.group(i) != null) {
                numbers.add(parts.group(i));
            }
        }
        double degrees = degrees(numbers, text);
        boolean negative = minus || "S".equals(letter) || "W".equals(letter);
        return new Coordinate(negative ? -degrees : degrees, letter);
    }

    private static double degrees(List<String> numbers, String text) {
        double degrees = 0;
        double unit = 1;
        for (int i = 0; i < numbers.size(); i++) {
            double number = Double.parseDouble(numbers.get(i));
            if (i > 0 && number >= SIXTY) {
                throw fault("expected minutes and seconds below 60, found " + quoted(text));
            }
            if (i < numbers.size() - 1 && numbers.get(i).contains(".")) {
                throw fault(
                        "expected a decimal point in the last number only, found " + quoted(text));
            }
            degrees += number / unit;
            unit *= SIXTY;
        }
        return degrees;
    }

    private static Point point(Coordinate first, Coordinate second) {
        if ((first.isLatitude() && second.isLatitude())
                || (first.isLongitude() && second.isLongitude())) {
            throw fault("expected one of N or S and one of E or W, found two alike");
        }
        boolean turned = first.isLongitude() || second.isLatitude();
        return turned
                ? checked(second.degrees(), first.degrees())
                : checked(first.degrees(), second.degrees());
    }

    private static Point checked(double latitude, double longitude) {
        if (!isOnEarth(latitude, longitude)) {
            throw fault(
                    "expected a latitude from -90 to 90 and a longitude from -180 to 180,"
                            + " found %s and %s.%s"
                                    .formatted(
                                            latitude,
                                            longitude,
                                            isOnEarth(longitude, latitude)
                                                    ? " Maybe the latitude comes first."
                                                    : ""));
        }
        return new Point(rounded(latitude), rounded(longitude));
    }

    private static boolean isOnEarth(double north, double east) {
        return Math.abs(north) <= 90 && Math.abs(east) <= 180;
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * ROUNDING) / ROUNDING;
    }

    private static String unread(String typed) {
        return "expected the name of a town, or latitude and longitude such as %s; found %s"
                .formatted(EXAMPLES, quoted(typed));
    }

    private static String quoted(String text) {
        return "“%s”".formatted(text.strip());
    }

    private static Refused fault(String message) {
        return Refused.invalid(FIELD, message);
    }
}
