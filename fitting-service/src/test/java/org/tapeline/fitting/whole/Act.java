package org.tapeline.fitting.whole;

import java.util.Optional;
import java.util.Set;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * Something that happens in a story.
 *
 * @param after acts that are its causes, or stand before it in its stream: it cannot be heard
 *     before these
 * @param stream whose news it is: for being late together
 * @param said what a peer says; empty for a deed of fitting itself
 * @param done the deed
 */
record Act(int number, Set<Integer> after, String stream, Optional<Envelope> said, Runnable done) {}
