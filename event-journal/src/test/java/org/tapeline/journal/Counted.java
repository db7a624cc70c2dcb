package org.tapeline.journal;

/** An event for these tests: something was counted. */
public record Counted(String thing, int number) {}
