package org.tapeline.proof.fuzz.wire;

/**
 * A header as it is sent; a name may come more than once.
 *
 * @param value each of its characters is one byte on the wire
 */
public record Header(String name, String value) {}
