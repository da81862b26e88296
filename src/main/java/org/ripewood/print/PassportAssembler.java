package org.ripewood.print;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.course.Content;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TrunkPicture;
import org.ripewood.platform.Actor;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;

/** Gathers what a tree's passport tells. */
@ApplicationScoped
class PassportAssembler {

    /** What lasts beyond a season, or what a next keeper has to begin with. */
    private static final List<Fact> LASTING =
            List.of(
                    Fact.FRONT_MARK,
                    Fact.VIGOUR_INDEX,
                    Fact.PEST_LEVEL,
                    Fact.HEIGHT_MM,
                    Fact.TRUNK_BASE_MM,
                    Fact.TRUNK_TARGET_MM,
                    Fact.REVERSE_TAPER,
                    Fact.ROOT_FLARE_EXPOSED,
                    Fact.ROOT_SPREAD_DEG,
                    Fact.CIRCLING_TURN,
                    Fact.MATTED_ROOTS,
                    Fact.SACRIFICE_ROOTS_LEFT,
                    Fact.FIRM_IN_CONTAINER,
                    Fact.SUBSTRATE_DRAINS,
                    Fact.RAMIFICATION_ORDERS,
                    Fact.BRANCHES_HOLD,
                    Fact.WIRE_ON,
                    Fact.DEADWOOD_PRESENT,
                    Fact.RECOVERY_LOAD);

    private final Standings standings;
    private final Aftercare aftercare;

    PassportAssembler(Standings standings, Aftercare aftercare) {
        this.standings = standings;
        this.aftercare = aftercare;
    }

    Passport lay(Actor actor, long treeId) {
        var look = standings.lookToday(actor, treeId);
        var tree = look.tree();
        var inForce = look.day().content();
        var growth = look.growth();
        return new Passport(
                tree,
                inForce.kindOf(tree.species()),
                look.on(),
                look.day().tellStage(),
                seen(inForce, look.day().state().facts()),
                look.containers(),
                growth.trunk(),
                TrunkPicture.of(TrunkOnPaper.of(tree, growth, look.branches()), Sheet.PAPER),
                growth.closings(),
                look.branches(),
                stages(inForce, ChecklistMaker.done(look.day())),
                works(inForce, look),
                open(aftercare.of(look.day().state())));
    }

    private static List<Passport.Seen> seen(Content content, Facts facts) {
        return LASTING.stream()
                .map(facts::find)
                .filter(Objects::nonNull)
                .map(found -> new Passport.Seen(content.text(found.fact()), found))
                .toList();
    }

    private static List<Passport.Stage> stages(Content content, List<Checklist.Done> done) {
        return content.stages().stream()
                .map(
                        stage ->
                                new Passport.Stage(
                                        stage.title(),
                                        done.stream()
                                                .filter(one -> isOf(content, one, stage.code()))
                                                .toList()))
                .filter(stage -> !stage.done().isEmpty())
                .toList();
    }

    private static boolean isOf(Content content, Checklist.Done done, String stage) {
        var technique = content.techniques().get(done.technique());
        return technique != null && technique.stage().equals(stage);
    }

    private static List<Passport.Worked> works(Content content, TreeLook look) {
        return look.worksTold().stream()
                .map(
                        told ->
                                new Passport.Worked(
                                        told.work(),
                                        content.titleOf(told.work().work().technique()),
                                        told.signedOff()))
                .toList();
    }

    private static List<CareTask> open(Care care) {
        return Stream.concat(care.now().stream(), care.ahead().stream()).toList();
    }
}
