/** Makes the demo job that comes with the program. */
package wherefrom.demo;
