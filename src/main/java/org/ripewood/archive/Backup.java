package org.ripewood.archive;

/**
 * A copy of the database that was made while the service ran.
 *
 * @param file its name, in the folder {@code backups} of the data folder
 */
public record Backup(String file, long bytes) {}
