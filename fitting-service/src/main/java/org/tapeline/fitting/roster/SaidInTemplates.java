package org.tapeline.fitting.roster;

import io.quarkus.qute.TemplateExtension;

/** Codes in words, for the pages. */
@TemplateExtension
final class SaidInTemplates {
  private SaidInTemplates() {}

  static String sizeSaid(String code) {
    return Words.size(code);
  }

  static String itemSaid(String code) {
    return Words.item(code);
  }
}
