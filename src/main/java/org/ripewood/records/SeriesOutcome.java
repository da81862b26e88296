package org.ripewood.records;

import java.util.List;

/** What became of a series: everything is kept, or nothing is and something is asked. */
public sealed interface SeriesOutcome {

    /** Every value is on record. */
    record Stored(List<Observation> observations) implements SeriesOutcome {
        public Stored {
            observations = List.copyOf(observations);
        }

        public List<Long> ids() {
            return observations.stream().map(Observation::id).toList();
        }
    }

    /** Nothing is on record; these are the questions nobody has said yes to, at least one. */
    record Asked(List<Question> questions) implements SeriesOutcome {
        public Asked {
            questions = List.copyOf(questions);
        }
    }
}
