package org.ripewood.api.content;

import java.util.List;
import org.ripewood.cases.CaseOutcome;
import org.ripewood.course.ContentFault;

/**
 * How reading the files again went.
 *
 * @param revision of the content in force now
 * @param faults what stands in the way of the files; empty when they are in force
 * @param disagreeingCases cases of the content in force that do not come out as their teachers say,
 *     which is no fault
 */
record RenewalAnswer(
        String revision, List<ContentFault> faults, List<CaseOutcome> disagreeingCases) {}
