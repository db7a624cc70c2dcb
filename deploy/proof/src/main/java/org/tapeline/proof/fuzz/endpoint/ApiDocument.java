package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The OpenAPI document (3.1) of a service. */
public final class ApiDocument {
  private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");
  private static final String SCHEMAS = "#/components/schemas/";

  private static final int DEPTH = 4;
  private static final Pattern BRACES = Pattern.compile("\\{([A-Za-z]+)}");

  private final String service;
  private final JsonNode document;

  public ApiDocument(String service, JsonNode document) {
    this.service = service;
    this.document = document;
  }

  public List<Endpoint> endpoints() {
    List<Endpoint> endpoints = new ArrayList<>();
    document
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue().properties().stream()
                    .filter(operation -> METHODS.contains(operation.getKey()))
                    .forEach(
                        operation ->
                            endpoints.add(
                                endpoint(
                                    operation.getKey(), path.getKey(), operation.getValue()))));
    return endpoints;
  }

  private Endpoint endpoint(String method, String path, JsonNode operation) {
    List<Endpoint.Parameter> parameters = new ArrayList<>();
    for (JsonNode parameter : operation.path("parameters")) {
      parameters.add(
          new Endpoint.Parameter(parameter.path("name").asText(), parameter.path("in").asText()));
    }
    Matcher braces = BRACES.matcher(path);
    while (braces.find()) {
      Endpoint.Parameter inPath = new Endpoint.Parameter(braces.group(1), "path");
      // Not every document names all of them.
      if (!parameters.contains(inPath)) {
        parameters.add(inPath);
      }
    }
    Map<String, JsonNode> bodies = new LinkedHashMap<>();
    operation
        .path("requestBody")
        .path("content")
        .properties()
        .forEach(
            body -> bodies.put(body.getKey(), resolved(body.getValue().path("schema"), DEPTH)));
    return new Endpoint(
        service,
        method.toUpperCase(Locale.ROOT),
        path,
        List.copyOf(parameters),
        bodies,
        operation.path("security").isEmpty());
  }

  /** The schema with what it only names written in; deeper than that nobody sends. */
  private JsonNode resolved(JsonNode schema, int depth) {
    String named = schema.path("$ref").asText("");
    JsonNode meant =
        named.startsWith(SCHEMAS)
            ? document.at("/components/schemas/" + named.substring(SCHEMAS.length()))
            : schema;
    if (depth == 0 || !meant.isObject()) {
      return meant;
    }
    ObjectNode whole = meant.deepCopy();
    if (whole.has("items")) {
      whole.set("items", resolved(whole.get("items"), depth - 1));
    }
    whole
        .path("properties")
        .properties()
        .forEach(property -> property.setValue(resolved(property.getValue(), depth - 1)));
    return whole;
  }
}
