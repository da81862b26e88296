package org.ripewood.firstlook;

/**
 * A length to be read with a rule, in mm.
 *
 * @param field of {@link NewLook} it is sent in
 * @param optional whether the question is answered without it
 */
public record LookNumber(String field, String label, String hint, boolean optional) {}
