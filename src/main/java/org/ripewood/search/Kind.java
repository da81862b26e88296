package org.ripewood.search;

/** What can be found, in the order it is told. */
public enum Kind {
    TREE("Trees", "/trees/"),
    PERSON("People", "/people/"),
    COURSE("Courses", "/courses/"),
    TECHNIQUE("Techniques", "/techniques/"),
    LESSON("Lessons", "/lessons/"),
    SPECIES("Species", "/species/"),
    RUBRIC("Rubrics", "/rubrics/"),
    WORD("Words of the trade", "/glossary#");

    private final String title;
    private final String page;

    Kind(String title, String page) {
        this.title = title;
        this.page = page;
    }

    public String title() {
        return title;
    }

    /** The address of the page of one of them. */
    String page(String key) {
        return page + key;
    }
}
