package org.ripewood.core.progress;

import org.jspecify.annotations.Nullable;

import java.util.List;
import java.util.function.Function;

/** Writes three-valued conditions as two expressions: surely so, and surely not so. */
final class ConditionText {

    private final Tongue tongue;

    ConditionText(Tongue tongue) {
        this.tongue = tongue;
    }

    Bool yes(@Nullable Condition condition) {
        if (condition == null) {
            return Bool.TRUE;
        }
        if (condition instanceof Condition.Test test) {
            return Bool.all(tongue.known(test.fact()), met(test.fact(), test.requirement()));
        }
        if (condition instanceof Condition.All all) {
            return Bool.all(each(all.parts(), this::yes));
        }
        if (condition instanceof Condition.Any any) {
            return Bool.any(each(any.parts(), this::yes));
        }
        return no(((Condition.Not) condition).part());
    }

    Bool no(@Nullable Condition condition) {
        if (condition == null) {
            return Bool.FALSE;
        }
        if (condition instanceof Condition.Test test) {
            var met = met(test.fact(), test.requirement());
            return Bool.all(tongue.known(test.fact()), met.not());
        }
        if (condition instanceof Condition.All all) {
            return Bool.any(each(all.parts(), this::no));
        }
        if (condition instanceof Condition.Any any) {
            return Bool.all(each(any.parts(), this::no));
        }
        return yes(((Condition.Not) condition).part());
    }

    Bool met(Fact fact, Requirement requirement) {
        if (requirement instanceof Requirement.AtLeast least) {
            return Bool.atLeast(tongue.number(fact), least.bound());
        }
        if (requirement instanceof Requirement.AtMost most) {
            return Bool.atMost(tongue.number(fact), most.bound());
        }
        if (requirement instanceof Requirement.Is is) {
            return is(fact, is.value());
        }
        var words = ((Requirement.OneOf) requirement).words();
        return Bool.any(words.stream().sorted().map(word -> tongue.wordIs(fact, word)).toList());
    }

    private Bool is(Fact fact, Value value) {
        if (value instanceof Value.Flag flag) {
            return flag.set() ? tongue.flag(fact) : tongue.flag(fact).not();
        }
        if (value instanceof Value.Number number) {
            return Bool.equal(tongue.number(fact), number.amount());
        }
        return tongue.wordIs(fact, ((Value.Word) value).word());
    }

    private static List<Bool> each(
            List<Condition> parts, Function<@Nullable Condition, Bool> write) {
        return parts.stream().map(write).toList();
    }
}
