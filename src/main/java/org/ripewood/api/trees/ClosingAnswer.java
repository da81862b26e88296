package org.ripewood.api.trees;

import java.util.List;
import org.ripewood.api.kit.OutlookAnswer;
import org.ripewood.condition.Closing;
import org.ripewood.core.growth.ClosureForecast;

/**
 * How a wound is going to close.
 *
 * @param narrow when it no longer counts as open
 * @param closed when the lips meet
 * @param restsOn {@code PRIOR_ONLY} as long as nobody has read it, else {@code READINGS}
 * @param readings how many have been made since the cut
 * @param expected openings by month: one case of ten, every second, nine of ten; empty without a
 *     forecast
 */
record ClosingAnswer(
        WoundAnswer wound,
        OutlookAnswer narrow,
        OutlookAnswer closed,
        ClosureForecast.Basis restsOn,
        int readings,
        List<ClosureForecast.Band> expected) {

    static ClosingAnswer of(Closing closing) {
        var forecast = closing.forecast();
        return new ClosingAnswer(
                WoundAnswer.of(closing.wound()),
                OutlookAnswer.of(closing.narrow()),
                OutlookAnswer.of(closing.closed()),
                forecast.basis(),
                forecast.readings(),
                closing.band());
    }
}
