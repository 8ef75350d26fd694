import '../App.tsx';
import 'node:fs';
