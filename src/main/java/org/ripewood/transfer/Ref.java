package org.ripewood.transfer;

/** A thing as the files name it; codes of wounds, branches and steps hold their tree's. */
record Ref(Kind kind, String code) {

    enum Kind {
        PERSON,
        SITE,
        COURSE,
        TREE,
        WOUND,
        BRANCH,
        STEP,
        WORK,
        SESSION,
        SUBSTRATE,
        STOCK
    }

    static Ref person(String login) {
        return new Ref(Kind.PERSON, login);
    }

    static Ref site(String code) {
        return new Ref(Kind.SITE, code);
    }

    static Ref course(String code) {
        return new Ref(Kind.COURSE, code);
    }

    static Ref tree(String code) {
        return new Ref(Kind.TREE, code);
    }

    static Ref substrate(String name) {
        return new Ref(Kind.SUBSTRATE, name);
    }

    /** Anything else in stock; names are used once in a kind. */
    static Ref stock(String kind, String name) {
        return new Ref(Kind.STOCK, kind + " " + name);
    }

    Ref part(Kind part, String partCode) {
        return new Ref(part, code + "/" + partCode);
    }
}
