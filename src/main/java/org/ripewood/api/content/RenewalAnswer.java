package org.ripewood.api.content;

import java.util.List;
import org.ripewood.course.ContentFault;

/**
 * How reading the files again went.
 *
 * @param revision of the content in force now
 * @param faults what stands in the way of the files; empty when they are in force
 */
record RenewalAnswer(String revision, List<ContentFault> faults) {}
