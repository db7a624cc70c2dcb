package org.tapeline.journal.quarkus.http;

/** Which addresses programs ask: they are told of a refusal in JSON, people by a page. */
final class ForPrograms {
  private static final String API = "api/";
  private static final String HOOKS = "hooks/";

  private ForPrograms() {}

  /**
   * @param path below the service's root, with or without a slash before it
   */
  static boolean is(String path) {
    String below = path.startsWith("/") ? path.substring(1) : path;
    return below.startsWith(API) || below.startsWith(HOOKS);
  }
}
