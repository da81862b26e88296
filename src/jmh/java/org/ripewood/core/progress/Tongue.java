package org.ripewood.core.progress;

import java.util.Map;

/** How a language names what rules ask of a tree on a day. */
interface Tongue {

    Bool known(Fact fact);

    String age(Fact fact);

    String number(Fact fact);

    Bool flag(Fact fact);

    Bool wordIs(Fact fact, String word);

    Bool byStudent(Fact fact);

    /** Days since a technique was signed off, or −1. */
    String done(String technique);

    Bool skilled(String lesson);

    /** One of stage, flowers, daysLeft, warmest, load, budget, heavy, foliage and root. */
    String figure(String name);

    /** Whether it is so today: withoutWinter, coolestWeeks, woodFrozen, ballFrozen and the like. */
    Bool sign(String name);

    /** Whether the tree has been quiet for so many days. */
    Bool quiet(int days);

    /** Growing days since a fact was seen, or −1. */
    String grown(Fact fact);

    /** A condition that many techniques ask, by the name it was given once; or as it is written. */
    Bool shared(String name, int place, Bool written);

    /** A condition that one technique asks again and again, in the same way. */
    default Bool local(String name, Bool written) {
        return written;
    }

    /** Java: calls of the methods of {@link Sight}. */
    static Tongue java(Rules rules) {
        return new Calls("s.", "%s", "!%s", "\"%2$s\".equals(%1$s)", true, rules.places());
    }

    /** DRL: the same within a pattern, in the comparisons its engine compiles. */
    static Tongue drl(Rules rules) {
        return new Calls("", "%s == true", "%s == false", "%s == \"%s\"", false, rules.places());
    }

    /**
     * @param yes how a flag is asked for
     * @param no how it is asked for the opposite
     * @param same how a word is compared, with places for word and text
     * @param named whether shared conditions have names
     */
    record Calls(
            String prefix,
            String yes,
            String no,
            String same,
            boolean named,
            Map<String, Integer> places)
            implements Tongue {

        @Override
        public Bool known(Fact fact) {
            return bool(call("known", fact));
        }

        @Override
        public String age(Fact fact) {
            return call("age", fact);
        }

        @Override
        public String number(Fact fact) {
            return call("number", fact);
        }

        @Override
        public Bool flag(Fact fact) {
            return bool(call("flag", fact));
        }

        @Override
        public Bool wordIs(Fact fact, String word) {
            var is = same.formatted(call("word", fact), word);
            return new Bool.Atom(is, is.contains("==") ? is.replace("==", "!=") : "!" + is);
        }

        @Override
        public Bool byStudent(Fact fact) {
            return bool(call("byStudent", fact));
        }

        @Override
        public String done(String technique) {
            return "%sdone(%d)".formatted(prefix, places.get(technique));
        }

        @Override
        public Bool skilled(String lesson) {
            return bool("%sskilled(\"%s\")".formatted(prefix, lesson));
        }

        @Override
        public String figure(String name) {
            return prefix + name + "()";
        }

        @Override
        public Bool sign(String name) {
            return bool(figure(name));
        }

        @Override
        public Bool quiet(int days) {
            return bool("%squiet(%d)".formatted(prefix, days));
        }

        @Override
        public String grown(Fact fact) {
            return call("grown", fact);
        }

        @Override
        public Bool shared(String name, int place, Bool written) {
            return named && !(written instanceof Bool.Fixed)
                    ? bool("%s[%d]".formatted(name, place))
                    : written;
        }

        @Override
        public Bool local(String name, Bool written) {
            return named && !(written instanceof Bool.Fixed) ? bool(name) : written;
        }

        private Bool bool(String call) {
            return new Bool.Atom(yes.formatted(call), no.formatted(call));
        }

        private String call(String method, Fact fact) {
            return "%s%s(%d)".formatted(prefix, method, fact.ordinal());
        }
    }
}
