/** Benchmarks: each lists a plain baseline beside Leverbook, so that every run yields a ratio. */
package org.leverbook.bench;
