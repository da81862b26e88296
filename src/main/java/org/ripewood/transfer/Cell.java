package org.ripewood.transfer;

/** A single value as it was written, and its line. */
record Cell(String text, int line) {}
