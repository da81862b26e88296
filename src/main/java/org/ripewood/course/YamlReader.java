package org.ripewood.course;

import java.io.StringReader;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.reader.ReaderException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Reads YAML with the line of every value.
 *
 * <p>Plain words are read by the core schema of YAML 1.2, so that {@code no} is a word and only
 * {@code true} and {@code false} are flags. Anchors, aliases and tags are refused: content says
 * what it means in place.
 */
final class YamlReader {

    private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]{1,18}");
    private static final Pattern DECIMAL =
            Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");
    private static final Set<Tag> PLAIN_TAGS =
            Set.of(
                    Tag.STR,
                    Tag.INT,
                    Tag.FLOAT,
                    Tag.BOOL,
                    Tag.NULL,
                    Tag.TIMESTAMP,
                    Tag.MERGE,
                    Tag.MAP,
                    Tag.SEQ);

    private final JsonNodeFactory nodes = JsonNodeFactory.instance;
    private final Map<String, Integer> lines = new HashMap<>();
    private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final String file;
    private final int linesBefore;
    private final Faults faults;

    private YamlReader(String file, int linesBefore, Faults faults) {
        this.file = file;
        this.linesBefore = linesBefore;
        this.faults = faults;
    }

    /**
     * Reads a text.
     *
     * @param linesBefore lines of the file above the text
     * @return null when it is no YAML, which is then among the faults
     */
    static @Nullable Document read(String file, String text, int linesBefore, Faults faults) {
        return new YamlReader(file, linesBefore, faults).read(text);
    }

    private @Nullable Document read(String text) {
        try {
            var yaml = new Yaml(new SafeConstructor(new LoaderOptions()));
            var top = yaml.compose(new StringReader(text));
            if (top == null) {
                faults.add(file, linesBefore + 1, "nothing", "YAML with the fields of its schema");
                return null;
            }
            return new Document(file, convert(top, "", line(top)), Map.copyOf(lines));
        } catch (MarkedYAMLException e) {
            var mark = e.getProblemMark();
            faults.add(
                    file,
                    mark == null ? 0 : linesBefore + mark.getLine() + 1,
                    String.valueOf(e.getProblem()),
                    "well-formed YAML");
        } catch (ReaderException e) {
            var line = text.substring(0, e.getPosition()).lines().count();
            faults.add(
                    file,
                    linesBefore + (int) Math.max(1, line),
                    "the character U+%04X".formatted(e.getCodePoint()),
                    "printable text");
        } catch (YAMLException e) {
            faults.add(file, 0, String.valueOf(e.getMessage()), "well-formed YAML");
        }
        return null;
    }

    private JsonNode convert(Node node, String pointer, int line) {
        lines.put(pointer, line);
        if (!plain(node, line)) {
            return nodes.missingNode();
        }
        if (node instanceof MappingNode mapping) {
            return mapping(mapping, pointer);
        }
        if (node instanceof SequenceNode sequence) {
            var list = nodes.arrayNode();
            for (int i = 0; i < sequence.getValue().size(); i++) {
                var item = sequence.getValue().get(i);
                list.add(convert(item, pointer + "/" + i, line(item)));
            }
            return list;
        }
        return node instanceof ScalarNode scalar ? scalar(scalar) : nodes.missingNode();
    }

    private JsonNode mapping(MappingNode mapping, String pointer) {
        var map = nodes.objectNode();
        for (var tuple : mapping.getValue()) {
            var line = line(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                faults.add(file, line, "a list or map as a name", "a word as a name");
                continue;
            }
            var name = key.getValue();
            if (map.has(name)) {
                faults.add(file, line, "\"%s\" a second time".formatted(name), "each name once");
                continue;
            }
            map.set(name, convert(tuple.getValueNode(), Document.pointer(pointer, name), line));
        }
        return map;
    }

    /** Tells of anchors and tags; a node seen before came by an alias, told at its anchor. */
    private boolean plain(Node node, int line) {
        if (!seen.add(node)) {
            return false;
        }
        if (node.getAnchor() != null) {
            faults.add(
                    file, line, "the anchor &" + node.getAnchor(), "values written out in place");
        }
        if (!PLAIN_TAGS.contains(node.getTag())) {
            faults.add(file, line, "the tag " + node.getTag(), "values without tags");
        }
        return true;
    }

    private JsonNode scalar(ScalarNode scalar) {
        var text = scalar.getValue();
        if (!scalar.isPlain()) {
            return nodes.stringNode(text);
        }
        if (text.isEmpty() || text.equals("~") || text.equals("null")) {
            return nodes.nullNode();
        }
        if (text.equals("true") || text.equals("false")) {
            return nodes.booleanNode(text.equals("true"));
        }
        if (WHOLE.matcher(text).matches()) {
            return nodes.numberNode(Long.parseLong(text));
        }
        if (DECIMAL.matcher(text).matches() && Double.isFinite(Double.parseDouble(text))) {
            return nodes.numberNode(Double.parseDouble(text));
        }
        return nodes.stringNode(text);
    }

    private int line(Node node) {
        return linesBefore + node.getStartMark().getLine() + 1;
    }
}
