package org.tapeline.fitting.overview;

/**
 * A field to choose, with how long a fit takes there.
 *
 * @param minutes length of a slot that is put forward
 * @param said where the figure is from
 */
public record FieldChoice(String code, String name, int minutes, String said) {}
