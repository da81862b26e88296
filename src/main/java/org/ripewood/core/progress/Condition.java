package org.ripewood.core.progress;

import java.util.List;
import java.util.function.Consumer;

/** A condition on facts, in three-valued logic. */
public sealed interface Condition {

    record Test(Fact fact, Requirement requirement) implements Condition {
        public Test {
            if (!requirement.fits(fact.kind())) {
                throw new IllegalArgumentException(
                        "%s is a %s and cannot be held against %s"
                                .formatted(fact.code(), fact.kind(), requirement));
            }
        }

        @Override
        public Truth holds(Facts facts) {
            var found = facts.seen(fact);
            return found == null ? Truth.UNKNOWN : Truth.of(requirement.metBy(found.value()));
        }

        @Override
        public void eachFact(Consumer<Fact> visit) {
            visit.accept(fact);
        }
    }

    record All(List<Condition> parts) implements Condition {
        public All {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth holds(Facts facts) {
            var truth = Truth.YES;
            for (var part : parts) {
                truth = truth.and(part.holds(facts));
                if (truth == Truth.NO) {
                    break;
                }
            }
            return truth;
        }

        @Override
        public void eachFact(Consumer<Fact> visit) {
            parts.forEach(part -> part.eachFact(visit));
        }
    }

    record Any(List<Condition> parts) implements Condition {
        public Any {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth holds(Facts facts) {
            var truth = Truth.NO;
            for (var part : parts) {
                truth = truth.or(part.holds(facts));
                if (truth == Truth.YES) {
                    break;
                }
            }
            return truth;
        }

        @Override
        public void eachFact(Consumer<Fact> visit) {
            parts.forEach(part -> part.eachFact(visit));
        }
    }

    record Not(Condition part) implements Condition {
        @Override
        public Truth holds(Facts facts) {
            return part.holds(facts).not();
        }

        @Override
        public void eachFact(Consumer<Fact> visit) {
            part.eachFact(visit);
        }
    }

    Truth holds(Facts facts);

    /** Shows every fact the condition asks for. */
    void eachFact(Consumer<Fact> visit);
}
