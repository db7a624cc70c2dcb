package org.tapeline.journal.quarkus.access;

import java.util.Locale;

/**
 * Where a request comes from, as the browser tells it. A browser sends its user's cookie, or the
 * name and password that it remembers, along with every form that any page in the world makes it
 * post; what it says of that page nobody but itself can write.
 *
 * @param fetchSite the header {@code Sec-Fetch-Site}; empty where the browser sends none (older
 *     ones, and all where the address is neither HTTPS nor the machine itself)
 * @param origin the header {@code Origin}; empty for a program
 * @param host under which we were asked, with the port where it is not the usual one
 */
record Sender(String fetchSite, String origin, String host) {
  Sender {
    fetchSite = fetchSite == null ? "" : fetchSite;
    origin = origin == null ? "" : origin;
  }

  /** Whether it was sent by a page of somebody else. */
  boolean isForeign() {
    return switch (fetchSite) {
      case "same-origin", "none" -> false;
      case "" -> !origin.isEmpty() && !plain(afterScheme(origin)).equals(plain(host));
      default -> true;
    };
  }

  private static String afterScheme(String origin) {
    int slashes = origin.indexOf("://");
    return slashes < 0 ? origin : origin.substring(slashes + "://".length());
  }

  /** Whoever ends TLS before us may leave us thinking that the scheme is the other one. */
  private static String plain(String host) {
    return host.toLowerCase(Locale.ROOT).replaceFirst(":(80|443)$", "");
  }
}
