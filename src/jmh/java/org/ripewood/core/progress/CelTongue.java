package org.ripewood.core.progress;

import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** CEL: a typed variable for everything rules ask, and how each is read off a {@link Sight}. */
final class CelTongue implements Tongue {

    /** A variable's type, and its value for a tree on a day. */
    record Variable(CelType type, Function<Sight, Object> read) {}

    private static final Map<String, Variable> FIGURES =
            Map.of(
                    "stage", new Variable(SimpleType.INT, sight -> (long) sight.stage()),
                    "flowers", new Variable(SimpleType.INT, sight -> (long) sight.flowers()),
                    "daysLeft", new Variable(SimpleType.INT, sight -> (long) sight.daysLeft()),
                    "warmest", new Variable(SimpleType.DOUBLE, Sight::warmest),
                    "load", new Variable(SimpleType.DOUBLE, Sight::load),
                    "budget", new Variable(SimpleType.DOUBLE, Sight::budget),
                    "heavy", new Variable(SimpleType.INT, sight -> (long) sight.heavy()),
                    "foliage", new Variable(SimpleType.DOUBLE, Sight::foliage),
                    "root", new Variable(SimpleType.DOUBLE, Sight::root));

    private static final Map<String, Function<Sight, Object>> SIGNS =
            Map.of(
                    "withoutWinter", Sight::withoutWinter,
                    "coolestWeeks", Sight::coolestWeeks,
                    "woodFrozen", Sight::woodFrozen,
                    "ballFrozen", Sight::ballFrozen,
                    "nearDangerousCold", Sight::nearDangerousCold);

    private final Map<String, Integer> places;
    private final Map<String, Variable> variables = new HashMap<>();

    CelTongue(Rules rules) {
        this.places = rules.places();
    }

    /** The variables written so far. */
    Map<String, Variable> variables() {
        return variables;
    }

    @Override
    public Bool known(Fact fact) {
        int at = fact.ordinal();
        return bool(fact.code() + "_known", sight -> sight.known(at));
    }

    @Override
    public String age(Fact fact) {
        int at = fact.ordinal();
        return variable(fact.code() + "_age", SimpleType.INT, sight -> sight.age(at));
    }

    @Override
    public String number(Fact fact) {
        int at = fact.ordinal();
        return variable(fact.code(), SimpleType.DOUBLE, sight -> sight.number(at));
    }

    @Override
    public Bool flag(Fact fact) {
        int at = fact.ordinal();
        return bool(fact.code(), sight -> sight.flag(at));
    }

    @Override
    public Bool wordIs(Fact fact, String word) {
        int at = fact.ordinal();
        var name =
                variable(
                        fact.code(),
                        SimpleType.STRING,
                        sight -> {
                            var found = sight.word(at);
                            return found == null ? "" : found;
                        });
        return Bool.equal(name, '"' + word + '"');
    }

    @Override
    public Bool byStudent(Fact fact) {
        int at = fact.ordinal();
        return bool(fact.code() + "_by_student", sight -> sight.byStudent(at));
    }

    @Override
    public String done(String technique) {
        int at = places.get(technique);
        return variable("done_" + technique, SimpleType.INT, sight -> sight.done(at));
    }

    @Override
    public Bool skilled(String lesson) {
        return bool("skilled_" + lesson.replace('-', '_'), sight -> sight.skilled(lesson));
    }

    @Override
    public String figure(String name) {
        var figure = FIGURES.get(name);
        return variable("now_" + name, figure.type(), figure.read());
    }

    @Override
    public Bool sign(String name) {
        return bool("now_" + name, SIGNS.get(name));
    }

    @Override
    public Bool quiet(int days) {
        return bool("quiet_" + days, sight -> sight.quiet(days));
    }

    @Override
    public String grown(Fact fact) {
        int at = fact.ordinal();
        return variable(fact.code() + "_grown", SimpleType.INT, sight -> sight.grown(at));
    }

    @Override
    public Bool shared(String name, int place, Bool written) {
        return written;
    }

    private Bool bool(String name, Function<Sight, Object> read) {
        variable(name, SimpleType.BOOL, read);
        return new Bool.Atom(name, "!" + name);
    }

    private String variable(String name, CelType type, Function<Sight, Object> read) {
        variables.put(name, new Variable(type, read));
        return name;
    }
}
