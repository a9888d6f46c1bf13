using FixPlanner.Commands;

return Root.Run(args);
