package org.ripewood.web.many;

/** What may be done to many trees at once. */
enum Act {
    ASSIGN("Assign a step"),
    RECORD("Record a fact"),
    SIGN_OFF("Sign off reports"),
    CARDS("Print tree cards");

    private final String words;

    Act(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
