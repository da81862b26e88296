package org.ripewood.web;

import java.util.List;
import org.ripewood.photos.Viewpoint;
import org.ripewood.trees.Wound;

/** What may be chosen of in a form about a photo. */
record PhotoLists(List<Wound> wounds, List<TreeSheet.StepLine> steps) {

    public List<Viewpoint> viewpoints() {
        return List.of(Viewpoint.values());
    }
}
