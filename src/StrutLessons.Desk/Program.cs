System.Console.WriteLine("StrutLessons");
