/** Root. */
package org.leverbook;
