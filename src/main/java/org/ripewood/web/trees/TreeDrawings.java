package org.ripewood.web.trees;

import java.util.List;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Trunk;
import org.ripewood.core.growth.Closure;
import org.ripewood.pictures.BranchPlace;
import org.ripewood.pictures.ClosureDrawing;
import org.ripewood.pictures.ClosurePicture;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TrunkDrawing;
import org.ripewood.pictures.TrunkPicture;
import org.ripewood.pictures.WoundPlace;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.TextFormat;

/** What of a tree's record is drawn. */
final class TreeDrawings {

    private TreeDrawings() {}

    static Picture closing(Closing closing, Sheet sheet) {
        return ClosurePicture.of(
                new ClosureDrawing(
                        closing.wound().place(),
                        closing.wound().closure().looks(),
                        Closure.ERROR_MM,
                        band(closing),
                        Closure.OPEN_FROM_MM,
                        closing.narrow(),
                        closing.on()),
                sheet);
    }

    private static List<ClosureDrawing.Opening> band(Closing closing) {
        return closing.band().stream()
                .map(
                        band ->
                                new ClosureDrawing.Opening(
                                        band.on(), band.lowMm(), band.middleMm(), band.highMm()))
                .toList();
    }

    static Picture trunk(
            Tree tree, Trunk trunk, List<Wound> wounds, List<Branch> branches, Sheet sheet) {
        return TrunkPicture.of(drawing(tree, trunk, wounds, branches), sheet);
    }

    /** From the front alone. */
    static Picture front(
            Tree tree, Trunk trunk, List<Wound> wounds, List<Branch> branches, Sheet sheet) {
        return TrunkPicture.front(drawing(tree, trunk, wounds, branches), sheet);
    }

    private static TrunkDrawing drawing(
            Tree tree, Trunk trunk, List<Wound> wounds, List<Branch> branches) {
        return new TrunkDrawing(
                tree.label(),
                trunk.profile(),
                trunk.heightMm(),
                wounds.stream().map(TreeDrawings::place).toList(),
                branches.stream().map(TreeDrawings::place).toList());
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
                TextFormat.small(branch.role()),
                branch.role() == BranchRole.SACRIFICE,
                branch.heightMm(),
                branch.bearingDegrees(),
                branch.diameterMm());
    }
}
