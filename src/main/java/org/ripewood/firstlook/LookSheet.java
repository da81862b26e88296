package org.ripewood.firstlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewSeries;
import org.ripewood.records.Question;

/** An answer as a series of readings, and which of its fields each reading came from. */
final class LookSheet {

    private final List<NewSeries.Whole> whole = new ArrayList<>();
    private final List<NewSeries.Diameter> diameters = new ArrayList<>();
    private final List<NewSeries.Opening> wounds = new ArrayList<>();
    private final Map<String, String> fields = new LinkedHashMap<>();

    LookSheet with(Fact fact, Value value, String field) {
        fields.put("whole[%d]".formatted(whole.size()), field);
        whole.add(new NewSeries.Whole(fact.code(), LookAnswer.text(value)));
        return this;
    }

    LookSheet with(Fact fact, @Nullable Double mm, String field) {
        return mm == null ? this : with(fact, Value.of(mm), field);
    }

    LookSheet diameter(double heightMm, double mm, String field) {
        fields.put("diameters[%d]".formatted(diameters.size()), field);
        diameters.add(new NewSeries.Diameter(heightMm, mm));
        return this;
    }

    LookSheet opening(long woundId, double mm, String field) {
        fields.put("wounds[%d]".formatted(wounds.size()), field);
        wounds.add(new NewSeries.Opening(woundId, mm));
        return this;
    }

    NewSeries series(LocalDate on, @Nullable List<String> confirmed) {
        return new NewSeries(on, null, diameters, wounds, whole, confirmed);
    }

    /** The same questions, asked at the fields of the answer. */
    List<Question> atFields(List<Question> questions) {
        return questions.stream()
                .map(asked -> new Question(asked.key(), fieldOf(asked.field()), asked.question()))
                .toList();
    }

    /** The same refusal, told at the fields of the answer. */
    Refused atFields(Refused refused) {
        var problem = refused.problem();
        return new Refused(
                new Problem(
                        problem.status(),
                        problem.kind(),
                        problem.title(),
                        problem.detail(),
                        problem.maybe(),
                        problem.faults().stream()
                                .map(fault -> new Fault(fieldOf(fault.field()), fault.message()))
                                .toList()));
    }

    private String fieldOf(String field) {
        var place = field.contains(".") ? field.substring(0, field.indexOf('.')) : field;
        return fields.getOrDefault(place, field);
    }
}
