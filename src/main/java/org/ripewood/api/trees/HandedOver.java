package org.ripewood.api.trees;

import java.time.LocalDate;

/** Whose a tree is from a day on; who handed it over may not see it any more. */
record HandedOver(long treeId, long keeperId, LocalDate since) {}
