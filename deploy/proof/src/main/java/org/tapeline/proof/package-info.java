/**
 * What kills, loads and attacks a running Tapeline from outside and compares what came of it with
 * what was accepted.
 */
package org.tapeline.proof;
