package org.ripewood.print;

import java.util.List;
import java.util.Locale;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Growth;
import org.ripewood.pictures.BranchPlace;
import org.ripewood.pictures.TrunkDrawing;
import org.ripewood.pictures.WoundPlace;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;

/** What of a tree's trunk is drawn on paper. */
final class TrunkOnPaper {

    private TrunkOnPaper() {}

    static TrunkDrawing of(Tree tree, Growth growth, List<Branch> branches) {
        var trunk = growth.trunk();
        return new TrunkDrawing(
                tree.label(),
                trunk.profile(),
                trunk.heightMm(),
                growth.closings().stream().map(Closing::wound).map(TrunkOnPaper::place).toList(),
                branches.stream().map(TrunkOnPaper::place).toList());
    }

    private static WoundPlace place(Wound wound) {
        return new WoundPlace(
                wound.place(),
                wound.heightMm(),
                wound.bearingDegrees(),
                wound.firstWidthMm(),
                wound.firstLengthMm(),
                wound.openMm(),
                wound.deadwoodByDesign());
    }

    private static BranchPlace place(Branch branch) {
        return new BranchPlace(
                branch.name(),
                branch.role().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                branch.role() == BranchRole.SACRIFICE,
                branch.heightMm(),
                branch.bearingDegrees(),
                branch.diameterMm());
    }
}
