package org.ripewood.steps;

import org.ripewood.platform.Actor;

/** Told within the transaction in which a step is assigned, to rooms that know more of its tree. */
public record StepAssigned(Actor by, long treeId, String technique, long stepId) {}
