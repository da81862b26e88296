package org.ripewood.api.content;

import org.ripewood.course.Content;

/** The content in force: its revision and how much it holds. */
record ContentAnswer(
        String revision,
        int stages,
        int groups,
        int facts,
        int species,
        int techniques,
        int lessons,
        int rubrics,
        int cases) {

    static ContentAnswer of(Content content) {
        return new ContentAnswer(
                content.revision(),
                content.stages().size(),
                content.groups().size(),
                content.facts().size(),
                content.species().size(),
                content.techniques().size(),
                content.lessons().size(),
                content.rubrics().size(),
                content.cases().size());
    }
}
