package org.ripewood.web.steps;

import java.util.List;
import java.util.Map;
import org.ripewood.asks.Ask;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What the page shows of what was asked.
 *
 * @param names of everybody who asked or answered, by id
 * @param teaches whether the reader answers
 * @param keeps whether the reader keeps the tree, and so asks
 */
record AskPageModel(
        Tree tree,
        List<Ask> asks,
        Map<Long, String> names,
        boolean teaches,
        boolean keeps,
        FormState typed) {

    public String name(long personId) {
        return names.getOrDefault(personId, "");
    }

    /** The form that answers one of them. */
    public FormState answer(Ask ask) {
        return typed.formOr("answer-" + ask.id());
    }

    /** The form that asks, where it came back. */
    public FormState ask() {
        return typed.formOr("ask");
    }

    /** Those at one technique. */
    AskPageModel at(String technique) {
        return new AskPageModel(
                tree,
                asks.stream().filter(ask -> ask.technique().equals(technique)).toList(),
                names,
                teaches,
                keeps,
                typed);
    }
}
