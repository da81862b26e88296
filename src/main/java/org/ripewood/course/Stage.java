package org.ripewood.course;

/** A stage in a tree's training; {@code order} from 1. */
public record Stage(String code, String title, int order, String aim, String ready) {}
