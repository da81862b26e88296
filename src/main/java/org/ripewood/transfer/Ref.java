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
        SESSION
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

    Ref part(Kind part, String partCode) {
        return new Ref(part, code + "/" + partCode);
    }
}
