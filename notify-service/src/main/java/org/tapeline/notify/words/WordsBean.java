package org.tapeline.notify.words;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** The words, read when the service starts: with a gap it does not start. */
@Singleton
class WordsBean {

  @Produces
  @Singleton
  Words words() {
    return Words.load();
  }
}
