package org.tapeline.notify.channel;

import java.util.List;

/** What recipients asked for, in the caller's transaction. */
@FunctionalInterface
public interface Wishes {

  /** Channels in the person's own order; empty for who asked for none. */
  List<String> of(String recipient);
}
