package org.ripewood.archive;

/** How a record is taken out. */
public enum RecordForm {
    /** {@code record.json} and the pictures its rows name. */
    ZIP,
    /** Without pictures, and without what is said of them. */
    JSON
}
