package org.ripewood.archive;

import java.util.function.UnaryOperator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A verdict kept as it was told: whoever saw the evidence is named in each of its reasons. */
final class DecisionNames {

    private static final String BY = "by";

    private DecisionNames() {}

    static String withoutNames(String json) {
        return renamed(json, name -> "");
    }

    /** The same with other names; nothing else in it changes, not even the order of its fields. */
    static String renamed(String json, UnaryOperator<String> newName) {
        var told = JsonMapper.shared().readTree(json);
        for (JsonNode reason : told.path("reasons")) {
            if (reason instanceof ObjectNode fields && fields.path(BY).isString()) {
                fields.put(BY, newName.apply(fields.path(BY).stringValue()));
            }
        }
        return JsonMapper.shared().writeValueAsString(told);
    }
}
