package org.ripewood.passwords;

/** What makes a password easy to guess, in words that complete "found". */
enum Weakness {
    COMMON("one of those that are tried first, since many people have had it"),
    OWN(
            "little more than your name, the name you sign in with, or words that everybody at"
                    + " such a school knows"),
    REPEATED("the same again and again"),
    IN_ORDER("letters or digits in their order"),
    NEIGHBOURS("keys that lie side by side"),
    DAY("little more than a day or a year"),
    WORDS("little more than a very common word or two");

    final String words;

    Weakness(String words) {
        this.words = words;
    }
}
