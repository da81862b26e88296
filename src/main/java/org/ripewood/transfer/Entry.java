package org.ripewood.transfer;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Suggestion;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Keys and values of one entry in a file. Whatever is missing or of the wrong sort becomes a fault
 * and a stand-in is handed out, so that reading goes on; an entry with a fault is not {@link
 * #sound} and is never entered.
 */
final class Entry {

    private final Page page;
    private final int line;
    private final Map<String, Node> values = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private final Set<String> asked = new HashSet<>();
    private boolean sound = true;

    private Entry(Page page, int line) {
        this.page = page;
        this.line = line;
    }

    static Entry of(Page page, Node node) {
        var entry = new Entry(page, Page.lineOf(node));
        if (node instanceof MappingNode mapping) {
            mapping.getValue().forEach(pair -> entry.put(pair.getKeyNode(), pair.getValueNode()));
        } else {
            entry.fault("", "expected keys with values, found " + Page.sortOf(node));
        }
        return entry;
    }

    private void put(Node keyNode, Node value) {
        if (!(keyNode instanceof ScalarNode key)) {
            fault("", "expected a plain word as key, found " + Page.sortOf(keyNode));
            return;
        }
        lines.putIfAbsent(key.getValue(), Page.lineOf(key));
        if (values.putIfAbsent(key.getValue(), value) != null) {
            page.fault(Page.lineOf(key), "%s is written twice".formatted(key.getValue()));
            sound = false;
        }
    }

    Place place() {
        return new Place(page.file(), line, lines, "");
    }

    boolean sound() {
        return sound;
    }

    void fault(String key, String message) {
        sound = false;
        page.fault(lines.getOrDefault(key, line), message);
    }

    /** Tells of keys nobody asked for; to be called when the entry is read. */
    void close() {
        for (var key : values.keySet()) {
            if (!asked.contains(key)) {
                fault(
                        key,
                        "there is no %s here; expected one of %s.%s"
                                .formatted(
                                        key,
                                        String.join(", ", asked.stream().sorted().toList()),
                                        Suggestion.maybe(asked, key)));
            }
        }
    }

    String text(String key) {
        return required(key, textOrNull(key), "");
    }

    @Nullable String textOrNull(String key) {
        var node = find(key);
        if (node == null) {
            return null;
        }
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        fault(key, "%s must be a single value, found %s".formatted(key, Page.sortOf(node)));
        return null;
    }

    double number(String key) {
        return required(key, numberOrNull(key), 0.0);
    }

    @Nullable Double numberOrNull(String key) {
        return read(key, "a number with a decimal point", Entry::parseNumber);
    }

    LocalDate day(String key) {
        return required(key, dayOrNull(key), page.loadingDay());
    }

    @Nullable LocalDate dayOrNull(String key) {
        return read(
                key,
                "a day such as 2027-03-14, or days from the day of loading such as -380",
                text -> DayText.read(text, page.loadingDay()));
    }

    LocalTime time(String key) {
        return required(
                key,
                read(
                        key,
                        "a time such as \"09:30\"",
                        text ->
                                text.matches("([01]\\d|2[0-3]):[0-5]\\d")
                                        ? LocalTime.parse(text)
                                        : null),
                LocalTime.NOON);
    }

    boolean flag(String key) {
        var flag = read(key, "yes or no", Entry::parseFlag);
        return flag != null && flag;
    }

    <E extends Enum<E>> E word(String key, Class<E> words) {
        var constants = List.of(words.getEnumConstants());
        var names = constants.stream().map(Enum::name).toList();
        return required(
                key,
                read(
                        key,
                        "one of " + String.join(", ", names),
                        text -> names.contains(text) ? Enum.valueOf(words, text) : null),
                constants.get(0));
    }

    List<Cell> texts(String key) {
        var cells = new ArrayList<Cell>();
        for (var node : list(key)) {
            if (node instanceof ScalarNode scalar) {
                cells.add(new Cell(scalar.getValue(), Page.lineOf(scalar)));
            } else {
                sound = false;
                page.fault(Page.lineOf(node), "expected a single value in " + key);
            }
        }
        return cells;
    }

    List<Entry> entries(String key) {
        return list(key).stream().map(node -> of(page, node)).toList();
    }

    /** Values by key, in the order they are written; empty when left out. */
    Map<String, Cell> table(String key) {
        var node = find(key);
        if (node == null) {
            return Map.of();
        }
        var inner = of(page, node);
        var cells = new LinkedHashMap<String, Cell>();
        for (var name : inner.values.keySet()) {
            var text = inner.textOrNull(name);
            if (text != null) {
                cells.put(name, new Cell(text, inner.lines.getOrDefault(name, inner.line)));
            }
        }
        sound &= inner.sound;
        return cells;
    }

    private List<Node> list(String key) {
        var node = find(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue();
        }
        fault(key, "%s must be a list, found %s".formatted(key, Page.sortOf(node)));
        return List.of();
    }

    private <V> @Nullable V read(String key, String expected, Function<String, @Nullable V> parse) {
        var text = textOrNull(key);
        if (text == null) {
            return null;
        }
        var value = parse.apply(text);
        if (value == null) {
            fault(key, "%s must be %s, found \"%s\"".formatted(key, expected, text));
        }
        return value;
    }

    private <V> V required(String key, @Nullable V value, V standIn) {
        if (value != null) {
            return value;
        }
        if (!values.containsKey(key)) {
            fault(key, "%s is missing".formatted(key));
        }
        return standIn;
    }

    private @Nullable Node find(String key) {
        asked.add(key);
        return values.get(key);
    }

    static @Nullable Double parseNumber(String text) {
        return text.matches("-?\\d{1,9}(\\.\\d{1,9})?") ? Double.valueOf(text) : null;
    }

    private static @Nullable Boolean parseFlag(String text) {
        return switch (text) {
            case "yes", "true" -> Boolean.TRUE;
            case "no", "false" -> Boolean.FALSE;
            default -> null;
        };
    }
}
