package org.ripewood.trees;

/**
 * Told within the transaction in which a tree gets another keeper, to rooms that know more of it.
 */
public record TreeHandedOver(long treeId, long keeperId) {}
