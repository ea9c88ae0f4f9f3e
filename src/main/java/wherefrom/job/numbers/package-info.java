/** The numbers of a job: figures kept, the plan with its what-ifs, torque cards, valve timing. */
@org.jspecify.annotations.NullMarked
package wherefrom.job.numbers;
