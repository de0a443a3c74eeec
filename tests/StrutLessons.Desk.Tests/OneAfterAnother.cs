// Browsers, kernels and front ends of several collections at once starve each other on a small machine, and what they do takes
// the time it takes: one collection after another.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
