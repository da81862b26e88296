package org.ripewood.transfer;

import java.io.StringReader;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** One file being read: its name, where its faults go, and the day its offsets count from. */
record Page(String file, LocalDate loadingDay, Faults faults) {

    /** The file's top entry, or null with the fault told when it is no readable YAML. */
    @Nullable Entry open(String text) {
        var options = new LoaderOptions();
        // Nobody writes a record with anchors; refusing them keeps small files from growing large.
        options.setMaxAliasesForCollections(0);
        options.setNestingDepthLimit(12);
        try {
            var root = new Yaml(options).compose(new StringReader(text));
            if (root == null) {
                fault(0, "the file is empty");
                return null;
            }
            return Entry.of(this, root);
        } catch (MarkedYAMLException e) {
            var mark = e.getProblemMark();
            fault(mark == null ? 0 : mark.getLine() + 1, "not readable: " + e.getProblem());
        } catch (YAMLException e) {
            fault(0, "not readable: " + e.getMessage());
        }
        return null;
    }

    void fault(int line, String message) {
        faults.add(new FileFault(file, line, message));
    }

    static int lineOf(Node node) {
        return node.getStartMark().getLine() + 1;
    }

    static String sortOf(Node node) {
        if (node instanceof MappingNode) {
            return "keys with values";
        }
        return node instanceof SequenceNode ? "a list" : "a single value";
    }
}
