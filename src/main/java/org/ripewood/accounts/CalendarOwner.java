package org.ripewood.accounts;

import org.ripewood.people.Person;

/**
 * Whose calendar a link leads to.
 *
 * @param seed names their events, whatever the link
 */
public record CalendarOwner(Person person, String seed) {}
