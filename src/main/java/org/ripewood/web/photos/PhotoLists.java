package org.ripewood.web.photos;

import java.util.List;
import org.ripewood.photos.Viewpoint;
import org.ripewood.records.Wound;
import org.ripewood.web.kit.StepLine;

/** What may be chosen of in a form about a photo. */
record PhotoLists(List<Wound> wounds, List<StepLine> steps) {

    public List<Viewpoint> viewpoints() {
        return List.of(Viewpoint.values());
    }
}
