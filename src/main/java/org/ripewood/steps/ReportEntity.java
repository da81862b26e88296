package org.ripewood.steps;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What was said to be done; a step sent back gets another one. */
@Entity
@Table(name = "step_report")
class ReportEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "step_report_seq")
    @SequenceGenerator(
            name = "step_report_seq",
            sequenceName = "step_report_seq",
            allocationSize = 50)
    @Nullable Long id;

    long stepId;
    LocalDate doneOn;
    String evidence;
    @Nullable Double foliageShare;
    @Nullable Double rootShare;
    @Nullable String woundPlace;
    @Nullable Double woundWidthMm;
    @Nullable Double woundLengthMm;
    @Nullable String containerKind;
    @Nullable String containerDescription;
    @Nullable Double containerLitres;
    long byId;
    Instant reportedAt;

    static ReportEntity of(NewReport report) {
        var entity = new ReportEntity();
        entity.doneOn = report.doneOn();
        entity.evidence = report.evidence().strip();
        entity.foliageShare = share(report.foliagePercent());
        entity.rootShare = share(report.rootPercent());
        entity.woundPlace = text(report.woundPlace());
        entity.woundWidthMm = report.woundWidthMm();
        entity.woundLengthMm = report.woundLengthMm();
        entity.containerKind = text(report.containerKind());
        entity.containerDescription = text(report.containerDescription());
        entity.containerLitres = report.containerLitres();
        return entity;
    }

    /** Whether the other says the same, so that a form sent twice counts once. */
    boolean saysTheSameAs(ReportEntity other) {
        return doneOn.equals(other.doneOn)
                && evidence.equals(other.evidence)
                && Objects.equals(foliageShare, other.foliageShare)
                && Objects.equals(rootShare, other.rootShare)
                && Objects.equals(woundPlace, other.woundPlace)
                && Objects.equals(woundWidthMm, other.woundWidthMm)
                && Objects.equals(woundLengthMm, other.woundLengthMm)
                && Objects.equals(containerKind, other.containerKind)
                && Objects.equals(containerDescription, other.containerDescription)
                && Objects.equals(containerLitres, other.containerLitres);
    }

    Step.Report told() {
        return new Step.Report(
                doneOn, evidence, foliageShare, rootShare, wound(), container(), byId, reportedAt);
    }

    Step.@Nullable WoundMade wound() {
        return woundPlace == null || woundWidthMm == null || woundLengthMm == null
                ? null
                : new Step.WoundMade(woundPlace, woundWidthMm, woundLengthMm);
    }

    Step.@Nullable ContainerTaken container() {
        return containerKind == null
                ? null
                : new Step.ContainerTaken(containerKind, containerDescription, containerLitres);
    }

    private static @Nullable Double share(@Nullable Double percent) {
        return percent == null ? null : percent / 100;
    }

    private static @Nullable String text(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : typed.strip();
    }
}
