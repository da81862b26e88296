package org.ripewood.standing;

import static org.ripewood.platform.records.NewsDescription.NONE;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.records.NewsDescription;
import org.ripewood.platform.records.NewsDescription.Whom;
import org.ripewood.platform.records.NewsDescriptions;

/** Stages that instructors confirmed, for keepers; one that was corrected is not told. */
@ApplicationScoped
class StageNews implements NewsDescriptions {

    @Override
    public List<NewsDescription> news() {
        return List.of(
                new NewsDescription(
                        Whom.KEEPER,
                        "observation o",
                        "o.fact = '%s' and o.superseded_by is null"
                                .formatted(Fact.TRAINING_STAGE.code()),
                        "o.recorded_at",
                        "'STAGE'",
                        "o.by_id",
                        "o.tree_id",
                        NONE,
                        "o.id",
                        "o.word_value"));
    }
}
