import './ui/look.css';
import './ui/fields.css';
import './ui/item.css';
import { start } from './app/start.tsx';

void start();
