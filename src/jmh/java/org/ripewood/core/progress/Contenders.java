package org.ripewood.core.progress;

import java.util.function.Function;

/** All ways that are measured. */
public enum Contenders {
    RULEBOOK(RulebookContender::new),
    STRAIGHT_JAVA(StraightJavaContender::new),
    CEL(CelContender::new),
    DROOLS(DroolsContender::new);

    private final Function<Rules, Contender> make;

    Contenders(Function<Rules, Contender> make) {
        this.make = make;
    }

    Contender make(Rules rules) {
        return make.apply(rules);
    }
}
