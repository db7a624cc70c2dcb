package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;

/**
 * One operation of a service's OpenAPI document.
 *
 * @param path with its parameters in braces
 * @param bodies schemas by media type, in the order of the document, with nothing only named
 * @param open needs no sign-in
 */
public record Endpoint(
    String service,
    String method,
    String path,
    List<Parameter> parameters,
    Map<String, JsonNode> bodies,
    boolean open) {

  /**
   * A parameter.
   *
   * @param in path, query or header
   */
  public record Parameter(String name, String in) {}

  /** What sort of thing answers there; the counts are shown by it. */
  public enum Kind {
    API,
    PAGE,
    FORM,
    FILE,
    LINK,
    HOOK
  }

  public Kind kind() {
    if (path.contains("/hooks/")) {
      return Kind.HOOK;
    }
    if (path.contains("{token}")) {
      return Kind.LINK;
    }
    if (isApi()) {
      return Kind.API;
    }
    if (path.matches(".*(\\.(csv|pdf|ics|json|js|webmanifest)|/csv)")) {
      return Kind.FILE;
    }
    return method.equals("GET") ? Kind.PAGE : Kind.FORM;
  }

  /** Refusals there are problems in JSON. */
  public boolean isApi() {
    return path.startsWith("/" + service + "/api/") || path.contains("/hooks/");
  }

  public boolean takes(String mediaType) {
    return bodies.containsKey(mediaType);
  }

  public List<String> parametersIn(String in) {
    return parameters.stream().filter(p -> p.in().equals(in)).map(Parameter::name).toList();
  }

  public String name() {
    return method + " " + path;
  }
}
